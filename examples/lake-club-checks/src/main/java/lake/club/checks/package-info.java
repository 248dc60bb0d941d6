/** Checks of the lake club. */
package lake.club.checks;
