/** All analyses of this module, to be searched for a described lattice. */
package org.flexwright.lattice.catalogue;
