import org.jspecify.annotations.NullMarked;

/** Quantities, evidence, hardness, laws, grades, responses and decisions. */
@NullMarked
@SuppressWarnings("module") // shells and lattice are compiled after core
module org.flexwright.core {
  requires static org.jspecify;
  requires commons.math3;

  exports org.flexwright;
  exports org.flexwright.internal to
      org.flexwright.shells,
      org.flexwright.lattice;
  exports org.flexwright.numeric to
      org.flexwright.shells,
      org.flexwright.lattice;
  exports org.flexwright.quantity;
  exports org.flexwright.run;
  exports org.flexwright.evidence;
  exports org.flexwright.hardness;
  exports org.flexwright.hardness.contact;
  exports org.flexwright.hardness.relation;
  exports org.flexwright.law;
  exports org.flexwright.law.classical;
  exports org.flexwright.fit;
  exports org.flexwright.condition;
  exports org.flexwright.grade;
  exports org.flexwright.durability;
  exports org.flexwright.response;
  exports org.flexwright.finder;
  exports org.flexwright.decide;
}
