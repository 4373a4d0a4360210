/** All analyses of this module, to be searched for a described wall or block. */
package org.flexwright.shells.catalogue;
