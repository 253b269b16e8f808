#pragma once
#include <QWidget>
#include <vector>

class QHBoxLayout;
class QLabel;
class QPushButton;

namespace cw {

/// The foot of everything at the bench: what was said last, the ways out on the left, the one main action on
/// the right.
class BenchFoot final : public QWidget {
  Q_OBJECT

 public:
  struct Action {
    QString text, objectName;
  };
  BenchFoot(const std::vector<Action>& ways, const Action& main, QWidget* parent = nullptr);

  QPushButton* way(std::size_t index) const { return m_ways[index]; }
  QPushButton* main() const { return m_main; }
  void say(const QString& sentence);

 private:
  void addWays(QHBoxLayout& to, const std::vector<Action>& ways);
  void addMain(QHBoxLayout& to, const Action& main);

  std::vector<QPushButton*> m_ways;
  QLabel* m_said;
  QPushButton* m_main;
};

}  // namespace cw
