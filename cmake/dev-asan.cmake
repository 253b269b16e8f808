# cmake -C cmake/dev-asan.cmake -S . -B build-asan: what check.sh tests. The other compiler, for its fuzzer and a
# second opinion. Light debug data, to link fast; several files in one go, which takes a third of the time.
set(CMAKE_CXX_COMPILER clang++ CACHE STRING "")
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "")
set(CMAKE_UNITY_BUILD ON CACHE BOOL "")
set(CMAKE_UNITY_BUILD_BATCH_SIZE 10 CACHE STRING "")
set(CW_SANITIZE "address,undefined" CACHE STRING "")
set(CW_FUZZ ON CACHE BOOL "")
set(CW_WERROR ON CACHE BOOL "")
