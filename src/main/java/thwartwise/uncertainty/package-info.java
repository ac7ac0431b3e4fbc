/**
 * How far a result may be off because its inputs are: the law of propagation of uncertainty to
 * first order (GUM, JCGM 100:2008, 5.1), and the propagation of distributions by simulation (GUM
 * Supplement 1, JCGM 101:2008, chapter 7). It knows nothing of boats.
 *
 * <p>Inputs are independent of each other. Quantities that share an error, as lengths read from one
 * tape do, are functions of one common input, and are then correlated as they should be.
 */
package thwartwise.uncertainty;
