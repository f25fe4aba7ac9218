/** Processes that are killed while they write, disks that are full, databases that go away. */
@NullMarked
package leafturn.records.kill;

import org.jspecify.annotations.NullMarked;
