/** A campaign folder opened: loads it, keeps it current, asks the engines. */
package org.cantonment.desk;
