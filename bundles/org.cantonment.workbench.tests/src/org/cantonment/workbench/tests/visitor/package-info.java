/** A plug-in as somebody else would write it; packed into jars by the tests and never used from here. */
package org.cantonment.workbench.tests.visitor;
