/** Rule sets and checklists as files, those that ship with the program and those of its user. */
package thwartwise.files.rules;
