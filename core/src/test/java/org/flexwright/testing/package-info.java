/** What the tests of all modules share: reference cases, rules of the code, effort of a call. */
package org.flexwright.testing;
