/**
 * Ordinary small boats, invented but measured as a tape would find them, for tests that ask what a
 * boatman would ask: is the answer believable, and what does a slip of the pencil do to it?
 */
package thwartwise.sampleboats;
