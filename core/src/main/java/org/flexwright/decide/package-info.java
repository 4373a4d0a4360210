/**
 * The question that a shop really asks: which wall or strut meets the target, prints and survives,
 * how sure is that, what stands in the way, and which lever or test print would open it.
 *
 * <p>A question knows no grade; the same question is asked again of a better known one. Every
 * answer has three sides: nominal (factors at their median), sure (the whole band, at the extremes
 * of service) and probable (the share of cases that meet). Verdicts have three values, since "not
 * decidable yet" is neither yes nor no.
 *
 * <p>This package sees only {@link org.flexwright.response.Part}, so a user's own part is asked
 * like a built-in one.
 */
@org.jspecify.annotations.NullMarked
package org.flexwright.decide;
