#pragma once

namespace cw::test {

/// What a crash does to writes that were not yet synced.
enum class Unsynced {
  Kept,                ///< they are in the file at once, as after the death of a process
  Dropped,             ///< none of them ever was, as after a power cut
  Scattered,           ///< some of them were, in any order
  DroppedDespiteSync,  ///< the disk lies: what was synced is lost as well
};

/// Makes SQLite of this process write through a file system that can crash. To be called before any file is
/// opened. `seed` decides which writes a scattering crash keeps.
void installFaultVfs(Unsynced unsynced, unsigned seed);

/// The process is killed (SIGKILL) at the n-th write or sync from now, before, or for a sync before or after,
/// it is carried out. 0: not at all.
void crashAtOperation(int n);

/// Every write from now on fails with this result code of SQLite (SQLITE_FULL, SQLITE_READONLY …); SQLITE_OK:
/// it is carried out again.
void refuseWrites(int code);

}  // namespace cw::test
