import org.jspecify.annotations.NullMarked;

/** Cells and finite pads of struts. */
@NullMarked
module org.flexwright.lattice {
  requires transitive org.flexwright.core;
  requires static org.jspecify;
  requires commons.math3;

  exports org.flexwright.lattice.cell;
  exports org.flexwright.lattice.scaling;
  exports org.flexwright.lattice.pad;
  exports org.flexwright.lattice.catalogue;
}
