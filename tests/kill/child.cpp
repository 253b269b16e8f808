#include "tests/kill/child.h"

#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <stdexcept>
#include <utility>

namespace cw::test {

Child::Child(const std::string& program, std::vector<std::string> words) {
  int ends[2];
  if (::pipe2(ends, O_CLOEXEC) != 0) throw std::runtime_error("no pipe");
  words.insert(words.begin(), program);
  std::vector<char*> pointers;
  for (std::string& word : words) pointers.push_back(word.data());
  pointers.push_back(nullptr);
  // Not fork: copying a sanitised process' page tables takes longer than the child's whole life.
  posix_spawn_file_actions_t actions;
  ::posix_spawn_file_actions_init(&actions);
  ::posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
  const int refused = ::posix_spawn(&m_process, program.c_str(), &actions, nullptr, pointers.data(), environ);
  ::posix_spawn_file_actions_destroy(&actions);
  if (refused != 0) throw std::runtime_error("cannot start " + program);
  ::close(ends[1]);
  m_lines = ::fdopen(ends[0], "r");
}

Child::~Child() {
  if (m_process > 0) kill(), wait();
  ::fclose(m_lines);
}

std::optional<std::string> Child::line() {
  std::string out;
  for (int c = ::fgetc(m_lines); c != EOF; c = ::fgetc(m_lines)) {
    if (c == '\n') return out;
    out += static_cast<char>(c);
  }
  return std::nullopt;
}

void Child::kill() {
  ::kill(m_process, SIGKILL);
}

bool Child::wait() {
  int status = 0;
  ::waitpid(std::exchange(m_process, -1), &status, 0);
  return WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
}

}  // namespace cw::test
