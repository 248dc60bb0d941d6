/** Tests in a real window. */
package org.cantonment.workbench.tests;
