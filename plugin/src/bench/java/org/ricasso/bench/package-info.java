/** Benchmarks, built and run in the profile {@code bench} alone. */
package org.ricasso.bench;
