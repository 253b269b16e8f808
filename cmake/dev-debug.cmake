# cmake -C cmake/dev-debug.cmake -S . -B build: for working on the program.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CW_WERROR ON CACHE BOOL "")
