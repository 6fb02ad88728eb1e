/** A calculation that never ends, for the test of the time limit. */
for (;;);
