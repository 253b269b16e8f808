# cmake -C cmake/dev-asan.cmake -S . -B build-asan: what check.sh tests. Light debug data, to link fast.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "")
set(CW_SANITIZE "address,undefined" CACHE STRING "")
# g++ 12 warns falsely of uninitialised values when sanitizers are on; the other trees keep warnings as errors.
set(CW_WERROR OFF CACHE BOOL "")
