#pragma once
#include <memory>

class QGuiApplication;

namespace cw {

/// Fonts and paper for a command that runs without a window: while it lives there is an application without
/// a screen. Where an application exists already it does nothing.
class Press {
 public:
  Press();
  ~Press();
  Press(const Press&) = delete;
  Press& operator=(const Press&) = delete;

 private:
  std::unique_ptr<QGuiApplication> m_application;
};

}  // namespace cw
