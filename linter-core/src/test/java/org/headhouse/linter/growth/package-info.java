/** How the work grows with what there can be many of in a file. */
package org.headhouse.linter.growth;
