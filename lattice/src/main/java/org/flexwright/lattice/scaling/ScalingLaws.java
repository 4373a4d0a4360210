package org.flexwright.lattice.scaling;

import static org.flexwright.lattice.scaling.LatticeProperty.BULK;
import static org.flexwright.lattice.scaling.LatticeProperty.CRUSHING;
import static org.flexwright.lattice.scaling.LatticeProperty.ELASTIC_COLLAPSE;
import static org.flexwright.lattice.scaling.LatticeProperty.PLASTIC_COLLAPSE;
import static org.flexwright.lattice.scaling.LatticeProperty.SHEAR;
import static org.flexwright.lattice.scaling.LatticeProperty.STRAIN_LIMIT;
import static org.flexwright.lattice.scaling.LatticeProperty.YOUNG;
import static org.flexwright.lattice.scaling.LatticeProperty.YOUNG_DIAGONAL;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;

/**
 * The scaling laws that the library knows.
 *
 * <p>Textbook constants of foams are averages over irregular foams with a wide scatter; those of
 * cells are exact for slender struts and rise with fat joints; those called solid are fits of
 * computed solid cells. For a cell of known strut and edge ask {@link
 * org.flexwright.lattice.cell.UnitCell} itself: it knows its joints.
 *
 * <p>JShell: {@code System.out.println(ScalingLaws.table(mpa(47), 0.1))}
 */
public final class ScalingLaws {

  private static final Source FOAMS =
      Source.memory("Gibson and Ashby 1997, Cellular Solids, second edition");
  private static final Source OCTET =
      Source.memory("Deshpande, Fleck and Ashby 2001, J. Mech. Phys. Solids 49, 1747");
  private static final Source ZHU =
      Source.memory("Zhu, Knott and Mills 1997, J. Mech. Phys. Solids 45, 319");
  private static final Source STIFFEST =
      Source.memory("Gurtner and Durand 2014, Proc. R. Soc. A 470, 20130611");
  private static final Source WARREN =
      Source.memory("Warren and Kraynik 1997, J. Appl. Mech. 64, 787");
  private static final Source GYROID =
      Source.memory("Khaderi, Deshpande and Fleck 2014, Int. J. Solids Struct. 51, 3866");
  private static final Source FRAMES =
      Source.derived("periodic frame of slender struts, low-density coefficient");
  private static final Source SOLIDS =
      Source.derived("solid finite elements of one periodic cell, fitted, Poisson's ratio 0.3");
  private static final Source FIBRE =
      Source.derived("modulus and peak fibre strain of slender struts");
  private static final double FOAM_LOW = 0.4; // irregular foams scatter (common practice)
  private static final double FOAM_HIGH = 2.0;

  /** Open-cell foams: E = rho^2. */
  public static final ScalingLaw OPEN_FOAM =
      ScalingLaw.power("open foam", YOUNG, 1.0, 2.0, 0.0, 0.3, FOAMS).band(FOAM_LOW, FOAM_HIGH);

  /** Open-cell foams: collapse by buckling struts, 0.05 rho^2. */
  public static final ScalingLaw OPEN_FOAM_COLLAPSE =
      ScalingLaw.power("open foam", ELASTIC_COLLAPSE, 0.05, 2.0, 0.0, 0.3, FOAMS)
          .band(FOAM_LOW, FOAM_HIGH);

  /** The stiffest isotropic network of struts: rho/6. */
  public static final ScalingLaw STIFFEST_ISOTROPIC =
      ScalingLaw.power("stiffest isotropic struts", YOUNG, 1.0 / 6.0, 1.0, 0.0, 0.3, STIFFEST)
          .band(0.3, 1.5); // real networks lie below it, their joints lift them

  private ScalingLaws() {}

  /**
   * Closed-cell foams: E = phi^2 rho^2 + (1 - phi) rho, phi the share of the solid in the edges;
   * gas pressure left out.
   *
   * @param edges phi, 0 to 1
   * @return the law
   * @throws org.flexwright.InvalidInputException if phi is outside 0 to 1
   */
  public static ScalingLaw closedFoam(double edges) {
    Require.between("share of the solid in the edges", edges, 0.0, 1.0, "");
    return new ScalingLaw(
            "closed foam, " + Text.number(edges) + " in the edges",
            YOUNG,
            "phi^2 rho^2 + (1 - phi) rho",
            rho -> edges * edges * rho * rho + (1.0 - edges) * rho,
            0.0,
            0.3,
            1.0,
            1.0,
            FOAMS)
        .band(FOAM_LOW, FOAM_HIGH);
  }

  /**
   * The Kelvin foam with struts of any section: K1 rho^2/(1 + K2 rho), K1 = (16 sqrt2/3) xi, K2 = 8
   * sqrt2 xi, slender struts without shear, rho to first order.
   *
   * @param section the section of the struts
   * @return the law
   */
  public static ScalingLaw kelvin(StrutSection section) {
    double k2 = 8.0 * Math.sqrt(2.0) * section.xi();
    double k1 = 2.0 / 3.0 * k2;
    return new ScalingLaw(
        "Kelvin foam, " + section + " struts",
        YOUNG,
        Text.number(k1) + " rho^2/(1 + " + Text.number(k2) + " rho)",
        rho -> k1 * rho * rho / (1.0 + k2 * rho),
        0.0,
        0.1,
        0.9,
        2.0, // joints of a wet foam double it: Mills 2007
        ZHU);
  }

  /**
   * The Poisson ratio of the Kelvin foam for a push along a cell edge, (1 - K2 rho)/(2 + 2 K2 rho).
   *
   * @param section the section of the struts
   * @param density relative density, above 0, below 1
   * @return nu12
   */
  public static double kelvinPoisson(StrutSection section, double density) {
    Require.between("relative density", density, Double.MIN_NORMAL, 1.0, "");
    double k = 8.0 * Math.sqrt(2.0) * section.xi() * density;
    return 0.5 * (1.0 - k) / (1.0 + k);
  }

  /**
   * The laws of a property.
   *
   * @param property which
   * @return an immutable list
   */
  public static List<ScalingLaw> of(LatticeProperty property) {
    return all().stream().filter(law -> law.property() == property).toList();
  }

  /**
   * Every law.
   *
   * @return an immutable list
   */
  public static List<ScalingLaw> all() {
    List<ScalingLaw> all = new ArrayList<>(List.of(OPEN_FOAM, OPEN_FOAM_COLLAPSE));
    all.add(closedFoam(0.6));
    all.add(foam(SHEAR, 0.375, 2.0));
    all.add(foam(PLASTIC_COLLAPSE, 0.3, 1.5));
    all.add(foam(CRUSHING, 0.2, 1.5));
    all.add(STIFFEST_ISOTROPIC);
    octet(all);
    for (StrutSection section : StrutSection.values()) {
      all.add(kelvin(section));
    }
    all.add(
        thin(ScalingLaw.power("any cell of equal struts", BULK, 1 / 9.0, 1.0, 0.0, 0.1, WARREN)));
    all.add(thin(ScalingLaw.power("gyroid net", YOUNG, 0.426, 2.0, 0.0, 0.05, GYROID)));
    frames(all);
    solids(all);
    strainLimits(all);
    for (LevelSurface surface : LevelSurface.all()) {
      surface.law().ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  private static ScalingLaw foam(LatticeProperty property, double constant, double exponent) {
    return ScalingLaw.power("open foam", property, constant, exponent, 0.0, 0.3, FOAMS)
        .band(FOAM_LOW, FOAM_HIGH);
  }

  /** A law of slender struts: fat joints make printed cells up to half as stiff again. */
  private static ScalingLaw thin(ScalingLaw law) {
    return law.band(0.95, 1.6);
  }

  private static void octet(List<ScalingLaw> all) {
    all.add(thin(ScalingLaw.power("octet, pinned", YOUNG, 1 / 9.0, 1.0, 0.0, 0.1, OCTET)));
    all.add(thin(ScalingLaw.power("octet, pinned", SHEAR, 1 / 12.0, 1.0, 0.0, 0.1, OCTET)));
    all.add(thin(ScalingLaw.power("octet, pinned", YOUNG_DIAGONAL, 0.2, 1.0, 0.0, 0.1, OCTET)));
    all.add(thin(ScalingLaw.power("octet, pinned", BULK, 1 / 9.0, 1.0, 0.0, 0.1, OCTET)));
    all.add(
        thin(
            ScalingLaw.power("octet, along an edge", STRAIN_LIMIT, 1 / 3.0, 1.0, 0.0, 0.1, OCTET)));
  }

  /** Exact limits of slender round struts, density to first order. */
  private static void frames(List<ScalingLaw> all) {
    double pi = Math.PI;
    double root3 = Math.sqrt(3.0);
    slender(all, "simple cubic", 1.0 / 3.0, 1.0, 1.0 / (6.0 * pi), 2.0);
    slender(all, "body-centred", root3 / (6.0 * pi), 2.0, 1.0 / 9.0, 1.0);
    slender(all, "diamond", 2.0 * root3 / (3.0 * pi), 2.0, 2.0 * root3 / (3.0 * pi), 2.0);
    slender(all, "rhombic dodecahedral", root3 / (3.0 * pi), 2.0, root3 / (3.0 * pi), 2.0);
  }

  private static void slender(
      List<ScalingLaw> all, String cell, double young, double n, double shear, double m) {
    String name = cell + ", slender struts";
    all.add(thin(ScalingLaw.power(name, YOUNG, young, n, 0.0, 0.05, FRAMES)));
    all.add(thin(ScalingLaw.power(name, SHEAR, shear, m, 0.0, 0.05, FRAMES)));
  }

  /** Fits over the true density, off by up to 18 %; the solid elements err by 3 %. */
  private static void solids(List<ScalingLaw> all) {
    solid(all, "simple cubic", 0.022, 0.286, 0.543, 1.110, 0.209, 2.303, 0.246, 1.180);
    solid(all, "body-centred", 0.038, 0.449, 0.556, 2.470, 0.212, 1.177, 0.281, 1.250);
    solid(all, "octet", 0.060, 0.629, 0.480, 1.490, 0.241, 1.348, 0.360, 1.371);
    solid(all, "diamond", 0.022, 0.081, 0.655, 2.110, 0.658, 2.097, 0.195, 1.111);
    solid(all, "Kelvin", 0.008, 0.112, 1.376, 2.141, 0.344, 2.098, 0.203, 1.112);
    solid(all, "rhombic dodecahedral", 0.019, 0.151, 0.570, 2.233, 0.497, 2.190, 0.221, 1.144);
  }

  private static void solid(
      List<ScalingLaw> all, String cell, double low, double high, double... c) {
    String name = cell + ", solid";
    LatticeProperty[] properties = {YOUNG, SHEAR, BULK};
    for (int i = 0; i < 3; i++) {
      all.add(
          ScalingLaw.power(name, properties[i], c[2 * i], c[2 * i + 1], low, high, SOLIDS)
              .band(0.82, 1.22));
    }
  }

  /** Onset of a strain limit in the extreme fibre: E100 over the peak strain of slender struts. */
  private static void strainLimits(List<ScalingLaw> all) {
    double pi = Math.PI;
    // Kelvin: E = (4 sqrt2/(3 pi)) rho^2, peak 3 x, rho = (3 sqrt2 pi/16) x^2
    double kelvin = 4.0 * Math.sqrt(2.0) / (3.0 * pi) / 3.0 * Math.sqrt(3 * Math.sqrt(2) * pi / 16);
    // body-centred: E = (sqrt3/(6 pi)) rho^2, peak (3/sqrt2) x, rho = (3 sqrt3 pi/4) x^2
    double body = Math.sqrt(3.0) / (6.0 * pi) * Math.sqrt(2.0) / 3.0;
    body *= Math.sqrt(0.75 * Math.sqrt(3.0) * pi);
    all.add(
        thin(ScalingLaw.power("Kelvin, along an edge", STRAIN_LIMIT, kelvin, 1.5, 0, 0.05, FIBRE)));
    all.add(thin(ScalingLaw.power("body-centred, edge", STRAIN_LIMIT, body, 1.5, 0, 0.15, FIBRE)));
    all.add(thin(ScalingLaw.power("simple cubic, edge", STRAIN_LIMIT, 1 / 3.0, 1, 0, 0.2, FIBRE)));
    all.add(thin(ScalingLaw.power("body-centred, diagonal", STRAIN_LIMIT, 0.25, 1, 0, 0.2, FIBRE)));
  }

  /**
   * Every law at one density, in groups by property, softest first.
   *
   * @param solid the property of the solid that each law multiplies
   * @param density relative density, above 0, below 1
   * @return the table, lines ending in a line feed
   */
  public static String table(Pressure solid, double density) {
    List<String[]> lines = new ArrayList<>();
    lines.add(new String[] {"property", "law", "value", "band", "exponent", "range", "source"});
    for (LatticeProperty property : LatticeProperty.values()) {
      of(property).stream()
          .sorted((a, b) -> Double.compare(a.relative(density), b.relative(density)))
          .forEach(law -> lines.add(row(law, solid, density)));
    }
    return Text.table(lines);
  }

  private static String[] row(ScalingLaw law, Pressure solid, double density) {
    Estimate<Pressure> value = law.of(solid, density);
    return new String[] {
      law.property().toString(),
      law.name(),
      value.nominal().toString(),
      value.low() + " .. " + value.high(),
      Text.number(law.exponent(density), 3),
      value.caveats().isEmpty() ? "in range" : "outside " + law.range(),
      law.source().toString()
    };
  }
}
