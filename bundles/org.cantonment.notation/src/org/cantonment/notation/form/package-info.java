/** What can be wrong with a book's form, before anybody asks what it means: codes, and which line may stand where. */
package org.cantonment.notation.form;
