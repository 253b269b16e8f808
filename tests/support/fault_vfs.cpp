#include "tests/support/fault_vfs.h"

#include <fcntl.h>
#include <signal.h>
#include <sqlite3.h>
#include <unistd.h>

#include <algorithm>
#include <cstring>
#include <map>
#include <memory>
#include <random>
#include <string>
#include <vector>

namespace cw::test {
namespace {

/// A file as its process sees it, and the writes that a crash would lose.
struct Shadow {
  std::string content;
  std::vector<std::pair<sqlite3_int64, sqlite3_int64>> unsynced;  // offset, length
};

struct Faults {
  Unsynced mode = Unsynced::Kept;
  std::mt19937 random;
  int operationsLeft = 0;
  int refusal = SQLITE_OK;
  sqlite3_vfs* real = nullptr;
  sqlite3_vfs own{};
  std::map<std::string, std::shared_ptr<Shadow>> shadows;
};

Faults& faults() {
  static Faults instance;
  return instance;
}

/// SQLite's view of an open file; the real one lies right behind it.
struct FaultFile {
  sqlite3_file base;
  std::shared_ptr<Shadow>* shadow;  // null for temporary files, which no crash matters to
  sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

FaultFile& fileOf(sqlite3_file* file) {
  return *reinterpret_cast<FaultFile*>(file);
}

sqlite3_file* realOf(sqlite3_file* file) {
  return fileOf(file).real();
}

void scatter() {
  for (const auto& [path, shadow] : faults().shadows) {
    const int handle = ::open(path.c_str(), O_WRONLY);
    for (const auto& [offset, length] : shadow->unsynced)
      if (faults().random() % 2 == 0 &&
          ::pwrite(handle, shadow->content.data() + offset, static_cast<std::size_t>(length), offset) < 0)
        ::abort();
    ::close(handle);
  }
}

void countOperation() {
  if (faults().operationsLeft == 0 || --faults().operationsLeft > 0) return;
  if (faults().mode == Unsynced::Scattered) scatter();
  ::raise(SIGKILL);
}

int carryOut(FaultFile& file) {
  Shadow& shadow = **file.shadow;
  for (const auto& [offset, length] : shadow.unsynced) {
    const int code = file.real()->pMethods->xWrite(file.real(), shadow.content.data() + offset,
                                                   static_cast<int>(length), offset);
    if (code != SQLITE_OK) return code;
  }
  shadow.unsynced.clear();
  return SQLITE_OK;
}

bool isShadowed(sqlite3_file* file) {
  return fileOf(file).shadow != nullptr;
}

int closeFile(sqlite3_file* file) {
  FaultFile& own = fileOf(file);
  if (own.shadow != nullptr) carryOut(own);
  delete own.shadow;
  return own.real()->pMethods->xClose(own.real());
}

int readFile(sqlite3_file* file, void* to, int amount, sqlite3_int64 offset) {
  if (!isShadowed(file)) return realOf(file)->pMethods->xRead(realOf(file), to, amount, offset);
  const std::string& content = (*fileOf(file).shadow)->content;
  const auto there =
      std::clamp<sqlite3_int64>(static_cast<sqlite3_int64>(content.size()) - offset, 0, amount);
  if (there > 0) std::memcpy(to, content.data() + offset, static_cast<std::size_t>(there));
  if (there == amount) return SQLITE_OK;
  std::memset(static_cast<char*>(to) + there, 0, static_cast<std::size_t>(amount - there));
  return SQLITE_IOERR_SHORT_READ;
}

int writeFile(sqlite3_file* file, const void* from, int amount, sqlite3_int64 offset) {
  if (!isShadowed(file)) return realOf(file)->pMethods->xWrite(realOf(file), from, amount, offset);
  if (faults().refusal != SQLITE_OK) return faults().refusal;
  countOperation();
  Shadow& shadow = **fileOf(file).shadow;
  const auto end = static_cast<std::size_t>(offset + amount);
  if (shadow.content.size() < end) shadow.content.resize(end);
  std::memcpy(shadow.content.data() + offset, from, static_cast<std::size_t>(amount));
  shadow.unsynced.emplace_back(offset, amount);
  return faults().mode == Unsynced::Kept ? carryOut(fileOf(file)) : SQLITE_OK;
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
  if (isShadowed(file)) {
    carryOut(fileOf(file));
    (*fileOf(file).shadow)->content.resize(static_cast<std::size_t>(size));
  }
  return realOf(file)->pMethods->xTruncate(realOf(file), size);
}

int syncFile(sqlite3_file* file, int flags) {
  if (isShadowed(file)) {
    countOperation();
    if (faults().mode == Unsynced::DroppedDespiteSync) return SQLITE_OK;
    const int code = carryOut(fileOf(file));
    if (code != SQLITE_OK) return code;
  }
  const int code = realOf(file)->pMethods->xSync(realOf(file), flags);
  if (isShadowed(file)) countOperation();
  return code;
}

int fileSize(sqlite3_file* file, sqlite3_int64* size) {
  if (!isShadowed(file)) return realOf(file)->pMethods->xFileSize(realOf(file), size);
  *size = static_cast<sqlite3_int64>((*fileOf(file).shadow)->content.size());
  return SQLITE_OK;
}

// Locks and shared memory are the real file's.
int lock(sqlite3_file* file, int level) {
  return realOf(file)->pMethods->xLock(realOf(file), level);
}
int unlock(sqlite3_file* file, int level) {
  return realOf(file)->pMethods->xUnlock(realOf(file), level);
}
int checkReserved(sqlite3_file* file, int* answer) {
  return realOf(file)->pMethods->xCheckReservedLock(realOf(file), answer);
}
int control(sqlite3_file* file, int operation, void* argument) {
  return realOf(file)->pMethods->xFileControl(realOf(file), operation, argument);
}
int sectorSize(sqlite3_file* file) {
  return realOf(file)->pMethods->xSectorSize(realOf(file));
}
int characteristics(sqlite3_file* file) {
  return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}
int shmMap(sqlite3_file* file, int page, int size, int extend, void volatile** memory) {
  return realOf(file)->pMethods->xShmMap(realOf(file), page, size, extend, memory);
}
int shmLock(sqlite3_file* file, int offset, int count, int flags) {
  return realOf(file)->pMethods->xShmLock(realOf(file), offset, count, flags);
}
void shmBarrier(sqlite3_file* file) {
  realOf(file)->pMethods->xShmBarrier(realOf(file));
}
int shmUnmap(sqlite3_file* file, int remove) {
  return realOf(file)->pMethods->xShmUnmap(realOf(file), remove);
}

// Version 2: shared memory, but no memory-mapped reading, which would go past the shadow.
constexpr sqlite3_io_methods kMethods{
    2,       closeFile,  readFile,      writeFile, truncateFile, syncFile,        fileSize,
    lock,    unlock,     checkReserved, control,   sectorSize,   characteristics, shmMap,
    shmLock, shmBarrier, shmUnmap,      nullptr,   nullptr};

std::string wholeContent(sqlite3_file* real) {
  sqlite3_int64 size = 0;
  real->pMethods->xFileSize(real, &size);
  std::string out(static_cast<std::size_t>(size), '\0');
  if (size > 0) real->pMethods->xRead(real, out.data(), static_cast<int>(size), 0);
  return out;
}

/// The two connections of one process share what they have not yet synced.
std::shared_ptr<Shadow> shadowOf(const std::string& path, sqlite3_file* real) {
  auto& shadow = faults().shadows[path];
  if (!shadow) shadow = std::make_shared<Shadow>(Shadow{wholeContent(real), {}});
  return shadow;
}

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags) {
  FaultFile& own = fileOf(file);
  own.base.pMethods = nullptr;
  own.shadow = nullptr;
  const int code = faults().real->xOpen(faults().real, name, own.real(), flags, outFlags);
  if (code != SQLITE_OK) return code;
  own.base.pMethods = &kMethods;
  if (name == nullptr) return SQLITE_OK;
  own.shadow = new std::shared_ptr<Shadow>(shadowOf(name, own.real()));
  return SQLITE_OK;
}

int deleteFile(sqlite3_vfs*, const char* name, int syncFolder) {
  faults().shadows.erase(name);
  return faults().real->xDelete(faults().real, name, syncFolder);
}

}  // namespace

void installFaultVfs(Unsynced unsynced, unsigned seed) {
  Faults& all = faults();
  all.mode = unsynced;
  all.random.seed(seed);
  all.real = sqlite3_vfs_find(nullptr);
  all.own = *all.real;
  all.own.zName = "faults";
  all.own.szOsFile = static_cast<int>(sizeof(FaultFile)) + all.real->szOsFile;
  all.own.xOpen = openFile;
  all.own.xDelete = deleteFile;
  sqlite3_vfs_register(&all.own, 1);
}

void refuseWrites(int code) {
  faults().refusal = code;
}

void crashAtOperation(int n) {
  faults().operationsLeft = n;
}

}  // namespace cw::test
