#include "app/run/bench_foot.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <cmath>

#include "app/look/labels.h"
#include "app/look/style.h"
#include "app/run/touch.h"

namespace cw {

BenchFoot::BenchFoot(const std::vector<Action>& ways, const Action& main, QWidget* parent) : QWidget(parent) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(24, touchGap(*this), 24, 16);
  m_said = textLabel({}, fontOfHeight(bench::kTextHeight, this, QFont::Bold), QPalette::BrightText);
  m_said->setObjectName(QStringLiteral("saidText"));
  m_said->hide();
  down->addWidget(m_said);
  auto* across = new QHBoxLayout;
  across->setSpacing(touchGap(*this));
  down->addLayout(across);
  addWays(*across, ways);
  across->addStretch(1);
  addMain(*across, main);
}

void BenchFoot::addWays(QHBoxLayout& to, const std::vector<Action>& ways) {
  for (const Action& each : ways) {
    m_ways.push_back(touchButton(each.text, each.objectName));
    to.addWidget(m_ways.back());
  }
}

void BenchFoot::addMain(QHBoxLayout& to, const Action& main) {
  m_main = new QPushButton(main.text);
  m_main->setObjectName(main.objectName);
  m_main->setProperty(kMainProperty, true);
  m_main->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  m_main->setMinimumSize(static_cast<int>(std::ceil(pixels(bench::kMainTargetWidth, this))),
                         static_cast<int>(std::ceil(pixels(bench::kMainTargetHeight, this))));
  to.addWidget(m_main, 4);
}

void BenchFoot::say(const QString& sentence) {
  m_said->setText(sentence);
  m_said->setVisible(!sentence.isEmpty());
}

}  // namespace cw
