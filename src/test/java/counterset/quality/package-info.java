/** Plans held against sessions that were made by hand: what a coach would rather lead. */
package counterset.quality;
