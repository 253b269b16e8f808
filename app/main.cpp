#include <iostream>

#include "app/command_line/command_line.h"

int main(int count, char** words) {
  return cw::runCommandLine(count, words, {std::cout, std::cerr, std::cin});
}
