#pragma once
#include "app/bench/bench_place.h"
#include "app/run/run_panel.h"
#include "tests/app/walk/walk.h"

class QComboBox;

namespace cw {

QString nameOfStage(Stage stage);

/// Takes the bench through whole jobs of the demo shop and looks at every state that it has not seen yet.
class BenchWalk {
 public:
  explicit BenchWalk(Walk& walk);

  /// From the list of jobs to the sealed record, by the sheet whose title begins so.
  void walkJob(const QString& sheet);
  void quickJoint();

 private:
  void look(const QString& state);
  void start(const QString& sheet);
  void doStage();
  void readGaps();
  void detours();
  void startOtherwise(QComboBox& person);
  void refusedWrench();
  void measureOutside();
  void everyWayOut();
  void pauseAndResume();
  void park();
  void setAsideOnce();
  void beWitness();
  Stage stage() const { return m_bench.run()->stage(); }
  const Job& job() const { return *m_bench.run()->course()->job(); }

  template <class Widget>
  Widget* shown(const char* name) const {
    for (Widget* widget : m_bench.findChildren<Widget*>(QLatin1String(name)))
      if (widget->isVisible()) return widget;
    return nullptr;
  }
  void type(const char* field, const QString& text) const;
  void press(const char* button) const;

  Walk& m_walk;
  BenchPlace& m_bench;
  std::set<QString> m_seen;
};

}  // namespace cw
