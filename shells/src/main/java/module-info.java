import org.jspecify.annotations.NullMarked;

/** Thin walls, bellows, inflated parts and parts of revolution. */
@NullMarked
module org.flexwright.shells {
  requires transitive org.flexwright.core;
  requires static org.jspecify;
  requires commons.math3;

  exports org.flexwright.shells.wall;
  exports org.flexwright.shells.tube;
  exports org.flexwright.shells.block;
  exports org.flexwright.shells.dome;
  exports org.flexwright.shells.bellows;
  exports org.flexwright.shells.inflate;
  exports org.flexwright.shells.revolution;
  exports org.flexwright.shells.solved;
  exports org.flexwright.shells.catalogue;
}
