/** The rules of the house: holds the project's folders against the table of rooms in DEVELOPERS.md. */
package org.cantonment.house;
