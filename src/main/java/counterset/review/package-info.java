/**
 * A plan that there is, looked at: what explains it, what is wrong with it, what would free it, and
 * what could stand at a place instead. Nothing here knows of options or prints.
 */
package counterset.review;
