/**
 * How fast the program is, as ratios within one run: absolute times say more about the machine and
 * its other guests than about the code.
 */
package thwartwise.benchmark;
