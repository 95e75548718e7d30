/** How near two words are, and which known word was meant by one that is not known. */
package counterset.spelling;
