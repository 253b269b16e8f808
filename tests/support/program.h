#pragma once
#include <sys/wait.h>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <string>
#include <vector>

#include "tests/support/temporary_folder.h"

namespace cw {

struct Answer {
  int exitCode = -1;
  std::string output;  ///< what it wrote on standard output

  std::vector<std::string> lines() const {
    std::vector<std::string> out;
    std::string_view rest = output;
    while (!rest.empty()) {
      const std::size_t end = std::min(rest.find('\n'), rest.size());
      out.emplace_back(rest.substr(0, end));
      rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return out;
  }
};

/// Runs a shell command once with `input` on its standard input.
inline Answer run(const std::string& command, const std::string& input) {
  const TemporaryFolder folder;
  std::ofstream(folder.file("input")) << input;
  std::FILE* pipe = popen((command + " < '" + folder.file("input") + "'").c_str(), "r");
  if (pipe == nullptr) return {};
  Answer answer;
  char buffer[4096];
  while (const std::size_t count = std::fread(buffer, 1, sizeof buffer, pipe))
    answer.output.append(buffer, count);
  const int status = pclose(pipe);
  answer.exitCode = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
  return answer;
}

}  // namespace cw
