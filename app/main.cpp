#include <iostream>

#include "app/command_line/command_line.h"
#include "app/shell/run_window.h"

int main(int count, char** words) {
  if (cw::asksForCommand(count, words)) return cw::runCommandLine(count, words, {std::cout, std::cerr, std::cin});
  return cw::runWindow(count, words);
}
