/** Expressions of the notation against an expression language that others wrote. */
package org.cantonment.desk.tests.outside.expressions;
