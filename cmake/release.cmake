# cmake -C cmake/release.cmake -S . -B build-release: the program as it is used.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_UNITY_BUILD ON CACHE BOOL "")
set(CMAKE_UNITY_BUILD_BATCH_SIZE 10 CACHE STRING "")
set(CW_BUILD_TESTS OFF CACHE BOOL "")
set(CW_WERROR ON CACHE BOOL "")
