/** A calculation that fails at once, for the test of its report. */
process.exitCode = 1;
