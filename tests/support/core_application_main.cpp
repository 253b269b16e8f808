#include <gmock/gmock.h>

#include <QCoreApplication>

int main(int count, char** words) {
  testing::InitGoogleMock(&count, words);
  const QCoreApplication application(count, words);
  return RUN_ALL_TESTS();
}
