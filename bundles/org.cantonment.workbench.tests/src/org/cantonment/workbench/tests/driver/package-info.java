/** A small driver for tests of the window: waits for what is to happen, presses keys, takes pictures. */
package org.cantonment.workbench.tests.driver;
