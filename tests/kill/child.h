#pragma once
#include <sys/types.h>

#include <cstdio>
#include <optional>
#include <string>
#include <vector>

namespace cw::test {

/// A child process, and what it says line by line.
class Child {
 public:
  Child(const std::string& program, std::vector<std::string> words);
  ~Child();
  Child(const Child&) = delete;
  Child& operator=(const Child&) = delete;

  /// Its next whole line; nothing once it has ended and all is read.
  std::optional<std::string> line();
  void kill();
  /// Waits for its end. True if it was killed.
  bool wait();

 private:
  pid_t m_process = -1;
  FILE* m_lines = nullptr;
};

}  // namespace cw::test
