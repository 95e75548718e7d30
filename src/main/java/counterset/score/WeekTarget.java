package counterset.score;

import counterset.model.WeekProblem.SetRange;

/**
 * A muscle group whose sets of the week count.
 *
 * @param index from 0
 * @param range the sets that it is to have
 * @param onSeveralDays whether two sessions or more have it as a target, so that it is to be
 *     trained on two days; one that a single session has cannot be without going against the ask
 */
public record WeekTarget(int index, String muscle, SetRange range, boolean onSeveralDays) {}
