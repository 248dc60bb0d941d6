/** Expressions in rule books, from the text to the finding. */
package org.cantonment.desk.tests.expressions;
