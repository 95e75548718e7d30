/**
 * Results as files: which text a file holds is said by the ending of its name, and files appear
 * whole or not at all. A new output is registered in the handout it is for.
 */
package counterset.report.file;
