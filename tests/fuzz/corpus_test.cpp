// Runs a fuzz target over its corpus in every build, so that what once went wrong stays tested without
// libFuzzer.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "tests/fuzz/fuzz.h"

namespace {

std::string contentOf(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

int answerTo(const std::string& bytes) {
  return LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}

TEST(Corpus, IsTakenWholeAndCutShort) {
  int files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(CW_CORPUS)) {
    SCOPED_TRACE(entry.path());
    const std::string bytes = contentOf(entry.path());
    EXPECT_EQ(answerTo(bytes), 0);
    for (const std::size_t parts : {2U, 3U, 5U, 7U})
      EXPECT_EQ(answerTo(bytes.substr(0, bytes.size() / parts)), 0);
    ++files;
  }
  EXPECT_GT(files, 0) << "no corpus in " CW_CORPUS;
}

}  // namespace
