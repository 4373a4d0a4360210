package org.flexwright.decide;

import org.flexwright.quantity.Length;

/**
 * The load at one value of the lever, with its whole band.
 *
 * @param size the value of the lever
 * @param load the load with its band
 */
public record CurvePoint(Length size, Candidate.Banded load) {}
