package org.flexwright.lattice.cell;

import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Source;
import org.flexwright.lattice.cell.AffineCell.Buckling;
import org.flexwright.lattice.cell.AffineCell.Struts;
import org.flexwright.lattice.cell.AffineCell.Turning;

/** The constants of the built-in cells whose nodes move with the mean strain. */
final class AffineCells {

  private static final double PI = Math.PI;
  private static final double ROOT2 = Math.sqrt(2.0);
  private static final double ROOT3 = Math.sqrt(3.0);
  private static final double ROOT6 = Math.sqrt(6.0);
  // tan of half the angle between an edge and a space diagonal, cosine 1/sqrt3
  static final double EDGE_SPACE = (ROOT3 - 1.0) / ROOT2;
  // tan of half the angle between a face and a space diagonal, cosine sqrt(2/3)
  private static final double FACE_SPACE = ROOT3 - ROOT2;
  private static final int[] FACES = {0, 0, 0, 4, 4, 0, 4, 0, 4, 0, 4, 4};

  private static final Source AFFINE =
      Source.derived("affine strut networks with shear; union volume of the joints");
  private static final Source BLOCH =
      Source.derived(
          "buckling of a periodic frame over waves of many lengths, d/L 0.05 and 0.1, coarse grid");
  private static final Source EULER =
      Source.derived(
          "Euler strain of a strut with pinned ends, an estimate between 0.5 and 4 times");
  // sway of straight lines of struts whose nodes turn: y tan y = 3, stress y^2/(9 pi)
  private static final double SWAY = 1.192459;

  private AffineCells() {}

  static AffineCell simpleCubic() {
    double c1 = 0.75 * PI;
    return new AffineCell(
        new CellShape(
            "simple cubic", Topology.ofEighths(0, 0, 0).joinAll(64).build(), 1.0, 1.0, c1, ROOT2),
        List.of(new Struts(StrutFamily.EDGES, c1, 1.0)),
        Turning.NONE,
        Optional.of(
            new JointStiffening(
                new double[] {0.0, 0.1, 0.2, 0.3, 0.4},
                new double[] {1.0, 1.0257, 1.0583, 1.0823, 1.1128},
                new double[] {1.0, 1.0787, 1.1771, 1.2814, 1.4129},
                new double[] {1.0, 1.1728, 1.4498, 1.8101, 2.2504},
                1.038,
                1.372,
                1.144)),
        new Buckling(
            SWAY * SWAY / (9.0 * PI),
            Source.derived("sway of endless lines of slender struts, y tan y = 3")),
        AFFINE);
  }

  static AffineCell faceCentred() {
    double c1 = 0.75 * ROOT2 * PI;
    return new AffineCell(
        new CellShape(
            "face-centred",
            Topology.ofEighths(FACES).join(0, 32).build(),
            Math.sqrt(0.5),
            1.0 / ROOT3,
            c1,
            1.0 + ROOT2),
        List.of(new Struts(StrutFamily.FACE_DIAGONALS, c1, 1.0)),
        Turning.FACE_NODES,
        Optional.of(
            new JointStiffening(
                new double[] {0.0, 0.2, 0.3},
                new double[] {1.0, 1.1967, 1.3954},
                new double[] {1.0, 1.19, 1.3185},
                new double[] {1.0, 1.0487, 1.0943},
                1.144,
                1.537,
                0.802)),
        new Buckling(0.0454, BLOCH),
        AFFINE);
  }

  static AffineCell octet() {
    double c1 = 1.5 * ROOT2 * PI;
    return new AffineCell(
        new CellShape(
            "octet",
            Topology.ofEighths(FACES).joinAll(32).build(),
            Math.sqrt(0.5),
            1.0 / ROOT3,
            c1,
            4.0 + 2.0 * ROOT2),
        List.of(new Struts(StrutFamily.FACE_DIAGONALS, c1, 1.0)),
        Turning.NONE,
        Optional.of(
            new JointStiffening(
                new double[] {0.0, 0.1, 0.15, 0.2, 0.3, 0.4},
                new double[] {1.0, 1.1013, 1.1792, 1.283, 1.5798, 1.9569},
                new double[] {1.0, 1.1279, 1.2061, 1.2965, 1.5222, 1.8283},
                new double[] {1.0, 1.0624, 1.109, 1.1687, 1.3263, 1.4975},
                0.984,
                1.54,
                0.953)),
        new Buckling(0.0581, BLOCH),
        AFFINE,
        Source.memory(
            "Deshpande, Fleck and Ashby 2001, J. Mech. Phys. Solids 49, 1747 (slender limit)"));
  }

  static AffineCell octahedral() {
    double c1 = 0.75 * ROOT2 * PI;
    return new AffineCell(
        new CellShape(
            "octahedral",
            Topology.ofEighths(4, 4, 0, 4, 0, 4, 0, 4, 4).joinAll(32).build(),
            Math.sqrt(0.5),
            1.0 / ROOT3,
            c1,
            1.0 + ROOT3),
        List.of(new Struts(StrutFamily.FACE_DIAGONALS, c1, 1.0)),
        Turning.OCTAHEDRA,
        Optional.of(
            new JointStiffening(
                new double[] {0.0, 0.2, 0.3},
                new double[] {1.0, 1.208, 1.4173},
                new double[] {1.0, 1.1688, 1.2796},
                new double[] {1.0, 1.0477, 1.0803})),
        new Buckling(0.0808, BLOCH),
        AFFINE);
  }

  static AffineCell simpleAndBodyCentred() {
    double shorter = 0.5 * ROOT3;
    double cube = shorter * shorter * shorter;
    // six edges of length a and eight half diagonals, d = x L
    double edges = 1.5 * PI * shorter * shorter;
    double diagonals = 0.75 * ROOT3 * PI;
    return new AffineCell(
        new CellShape(
            "simple cubic and body-centred",
            Topology.ofEighths(0, 0, 0, 4, 4, 4).joinAll(64).joinAll(48).build(),
            shorter,
            EDGE_SPACE,
            edges + diagonals,
            (2.0 + 6.0 * ROOT3) * cube),
        List.of(
            new Struts(StrutFamily.EDGES, edges, shorter),
            new Struts(StrutFamily.SPACE_DIAGONALS, diagonals, 1.0)),
        Turning.NONE,
        Optional.empty(),
        new Buckling(0.0, EULER),
        AFFINE,
        Source.memory(
            "Gurtner and Durand 2014, Proc. R. Soc. A 470, 20130611 (isotropic mixture)"));
  }

  static AffineCell faceAndBodyCentred() {
    double shorter = Math.sqrt(0.5);
    double longer = 0.5 * ROOT3;
    double cube = shorter * shorter * shorter;
    double faces = 0.75 * ROOT2 * PI;
    // eight half diagonals of length longer, d = x shorter
    double diagonals = 2.0 * PI * longer * shorter * shorter;
    return new AffineCell(
        new CellShape(
            "face- and body-centred",
            Topology.ofEighths(0, 0, 0, 4, 4, 0, 4, 0, 4, 0, 4, 4, 4, 4, 4)
                .join(0, 32)
                .join(0, 48)
                .build(),
            shorter,
            FACE_SPACE,
            faces + diagonals,
            (9.0 + 2.0 * ROOT6 + 2.0 * ROOT2) * cube),
        List.of(
            new Struts(StrutFamily.FACE_DIAGONALS, faces, 1.0),
            new Struts(StrutFamily.SPACE_DIAGONALS, diagonals, shorter / longer)),
        Turning.FACE_NODES,
        Optional.empty(),
        new Buckling(0.0, EULER),
        AFFINE);
  }
}
