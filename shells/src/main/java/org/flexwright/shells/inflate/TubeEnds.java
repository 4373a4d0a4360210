package org.flexwright.shells.inflate;

/** What the ends of an inflated tube do along its axis. */
public enum TubeEnds {
  /** Held at a given axial stretch. */
  HELD,
  /** Closed by caps that the pressure pushes apart. */
  CLOSED,
  /** Sealed on something that slides; no axial force in the wall. */
  OPEN
}
