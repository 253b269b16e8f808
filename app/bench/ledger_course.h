#pragma once
#include "app/common/workspace.h"
#include "app/run/course.h"

namespace cw {

/// A job that is kept in the shop file: every entry is durable before it counts.
class LedgerCourse final : public Course {
  Q_OBJECT

 public:
  LedgerCourse(Workspace& workspace, Id job, Worker worker, QObject* parent = nullptr);

  const Job* job() override;
  ShopFloor floor() override;
  Moment now() override { return m_workspace.clock().now(); }
  bool isOverruled(const Sheet& sheet) override;
  bool isSignedIn() override;

  bool state(Body body) override;
  bool stateAs(const QString& sign, const QString& pin, Body body) override;
  bool stateAllowed(const GivenWord& word, Body body) override;
  bool resume(const QString& pin, const QString& supervisorPin, Resumed resumed) override;

 private:
  Draft drafted(Body body) const;
  bool enter(const Draft& draft, const Pins& pins = {});

  Workspace& m_workspace;
};

}  // namespace cw
