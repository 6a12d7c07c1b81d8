/** Tests of the façade and of what it promises. */
package org.headhouse.linter;
