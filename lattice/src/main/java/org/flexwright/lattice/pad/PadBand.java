package org.flexwright.lattice.pad;

import org.flexwright.lattice.pad.FinitePads.Grip;
import org.flexwright.response.ScaledValue;

/**
 * The model's own band of a pad at a strain, as ratios to the nominal answer.
 *
 * <p>Both ways, taken together as independent: solid finite elements of the joints 3 % (30 % for
 * each 0.2 of slenderness above 0.4), reading between the rows of the table 2 % (15 % outside, 50 %
 * for cells whose struts go on straight from cell to cell), the softening curve of a slender strut
 * 3 %, whether fat joints change how the pad is held (the full difference), and whether the part of
 * the load that comes from holding the sides softens like the rest or not at all (the full
 * difference).
 *
 * <p>One way: a dry face that slips (low), struts that buckle (low: the load stays at its value
 * when the first strut buckles, or at the answer of the endless lattice if that is higher), a face
 * whose nodes cannot turn though it slips (high), a longer second side (high).
 *
 * <p>Without a table the band is the bracket between free and held sides itself.
 */
final class PadBand {

  private final PadMechanics m;
  private final LatticePad pad;
  private final double strain;

  PadBand(LatticePad pad, PadMechanics m, double strain) {
    this.pad = pad;
    this.m = m;
    this.strain = strain;
  }

  ScaledValue onLoad(ScaledValue load) {
    double both = both();
    double down = Math.log(Math.min(1.0, Math.min(slip(), buckled())));
    double up = Math.max(0.0, Math.log(m.riseWithoutTurning() / m.rise()));
    up += Math.max(0.0, Math.log(m.riseOfLongerSide() / m.rise()));
    down += Math.log(m.path().least(strain));
    up += Math.log(m.path().most(strain));
    if (!m.tabled()) {
      up += Math.log(Math.max(1.0, m.highest() / m.rise()));
      down += Math.min(0.0, Math.log(m.lowest() / m.rise()));
    }
    return load.model(Math.exp(down - both), Math.exp(up + both));
  }

  private double both() {
    double x = m.slenderness();
    double joints = Math.log(1.03) + Math.log(1.3) * Math.max(0.0, x - 0.4) / 0.2;
    double reading = Math.log(reading());
    // without a table the bracket covers how the pad is held
    double transfer = m.tabled() ? Math.log(m.rise() / m.riseWithoutTransfer()) : 0.0;
    double s = m.softening(strain);
    double excess = Math.max(0.0, m.rise() - 1.0);
    double straight = Math.min(strain, 2.0 * s); // held parts buckle with the rest
    double large = Math.log((s + excess * straight) / ((1.0 + excess) * s));
    double sum = 0.0;
    for (double part : new double[] {joints, reading, Math.log(1.03), transfer, large}) {
      sum = Math.hypot(sum, part);
    }
    return sum;
  }

  private double reading() {
    WholeCells c = pad.cells();
    int across = Math.min(c.wide(), c.deep());
    boolean inside = across <= FinitePads.MOST_ACROSS && c.high() <= FinitePads.MOST_HIGH;
    if (inside || !m.tabled()) {
      return 1.02;
    }
    return m.straightChains() ? 1.5 : 1.15;
  }

  /** The load over the nominal one if every dry face slips. */
  private double slip() {
    return m.rise(pad.slippedGrip()) / m.rise();
  }

  /** The load over the nominal one if struts buckle. */
  private double buckled() {
    double first = m.buckling();
    if (strain <= first) {
      return 1.0;
    }
    double plateau = m.softening(first) / m.softening(strain);
    double endless = Math.min(1.0, m.rise(Grip.FREE)) / m.rise();
    return Math.min(1.0, Math.max(plateau, endless));
  }

  /**
   * The band of the peak strut strain: a quarter less where the joint shortens the strut, 40 % more
   * for the crease at the joint (judgement), less where a dry face slips, more where struts buckle
   * (a strut held at both ends that shortens by e beyond Euler's strain bends to 2 pi x sqrt(e));
   * wider outside the table. Without a table half of it is left at the low end, and at the high end
   * it is 3.6 times as large where a face holds (the corners of a bonded pad) and 1.5 times where
   * none does: the widest that the two tabled cells show.
   */
  ScaledValue onStrain(ScaledValue peak) {
    double low = 0.75 * Math.min(1.0, m.peakRatio(pad.slippedGrip()) / m.peakRatio(pad.grip()));
    double beyond = m.axialRatio() * (strain - m.buckling());
    double bent = beyond > 0.0 ? 2.0 * Math.PI * m.slenderness() * Math.sqrt(beyond) : 0.0;
    double outside = Math.max(1.0, reading() / 1.02 * reading() / 1.02);
    double high = 1.4 * outside * Math.max(1.0, bent / peak.nominal());
    if (m.tabled()) {
      return peak.model(low / outside, high);
    }
    double free = 0.75 * m.peakRatio(Grip.FREE) / m.peakRatio(pad.grip());
    return peak.model(0.5 * free, high * (pad.grip() == Grip.FREE ? 1.5 : 3.6));
  }
}
