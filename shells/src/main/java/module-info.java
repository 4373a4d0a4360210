import org.jspecify.annotations.NullMarked;

/** Thin walls, bellows, inflated parts and parts of revolution. */
@NullMarked
module org.flexwright.shells {
  requires transitive org.flexwright.core;
  requires static org.jspecify;

  exports org.flexwright.shells.seed;
}
