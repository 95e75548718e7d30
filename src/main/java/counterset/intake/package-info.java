/**
 * What a coach names, read: words or files, typed sessions, plans of earlier. A plan is worked out
 * anew as it is read. Every fault is found in one run.
 */
package counterset.intake;
