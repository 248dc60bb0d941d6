/** How fast the desk is, beside what the same machine needs for the bare minimum in the same run. */
package org.cantonment.benchmarks;
