#include "app/bench/step_list.h"

#include <QPainter>
#include <QScrollBar>

#include "app/common/colours.h"
#include "app/common/measures.h"
#include "app/common/wording.h"

namespace cw {
namespace {

enum class Mark { ToDo, Now, Done, SetAside, Blank, SecondPerson };

struct StepLine {
  int number = 0;
  QString text;
  Mark mark = Mark::ToDo;
};

Mark markOf(const Job& job, std::size_t index, bool now) {
  if (now) return Mark::Now;
  switch (job.steps[index].state) {
    case StepState::Done:
      return Mark::Done;
    case StepState::SetAside:
      return Mark::SetAside;
    case StepState::Blank:
      return Mark::Blank;
    case StepState::Open:
      break;
  }
  return job.sheet.steps[index].kind == StepKind::Hold ? Mark::SecondPerson : Mark::ToDo;
}

QString wordOf(Mark mark) {
  switch (mark) {
    case Mark::ToDo:
      return StepList::tr("to do");
    case Mark::Now:
      return StepList::tr("now");
    case Mark::Done:
      return StepList::tr("done");
    case Mark::SetAside:
      return StepList::tr("set aside");
    case Mark::Blank:
      return StepList::tr("left blank");
    case Mark::SecondPerson:
      return StepList::tr("second person, to do");
  }
  return {};
}

}  // namespace

class StepList::Canvas final : public QWidget {
 public:
  explicit Canvas(QWidget* parent) : QWidget(parent) {}

  void setLines(std::vector<StepLine> lines) {
    m_lines = std::move(lines);
    QStringList spoken;
    for (const StepLine& line : m_lines)
      spoken << QStringLiteral("%1 %2, %3").arg(QString::number(line.number), line.text, wordOf(line.mark));
    setAccessibleName(spoken.join(QStringLiteral("; ")));
    setMinimumHeight(static_cast<int>(rowHeight() * static_cast<double>(m_lines.size())) + 8);
    update();
  }
  double rowHeight() const { return pixels(bench::kTarget * 0.95, this); }

 protected:
  void paintEvent(QPaintEvent*) override {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    double top = 4;
    for (const StepLine& line : m_lines) {
      draw(painter, line, QRectF(0, top, width(), rowHeight()));
      top += rowHeight();
    }
  }

 private:
  void draw(QPainter& painter, const StepLine& line, const QRectF& row) {
    const double radius = rowHeight() * 0.29;
    const QPointF centre(radius + 3, row.center().y());
    drawMark(painter, line, centre, radius);
    const bool strong = line.mark == Mark::Now;
    painter.setFont(fontOfHeight(bench::kLabelHeight, this, strong ? QFont::Bold : QFont::Normal));
    painter.setPen(strong || line.mark == Mark::Done ? inkOf(palette()) : secondInkOf(palette()));
    const QString text = QStringLiteral("%1  %2").arg(line.number).arg(line.text);
    const QRectF where = row.adjusted(2 * radius + 14, 0, -4, 0);
    painter.drawText(where, Qt::AlignVCenter | Qt::AlignLeft,
                     painter.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(where.width())));
  }

  void drawMark(QPainter& painter, const StepLine& line, const QPointF& centre, double radius) {
    const bool filled = line.mark == Mark::Done || line.mark == Mark::Now;
    const QColor colour = line.mark == Mark::Now ? accentOf(palette()) : inkOf(palette());
    painter.setPen(QPen(filled                        ? colour
                        : line.mark == Mark::SetAside ? warningOf(palette())
                                                      : lineOf(palette()),
                        2));
    painter.setBrush(filled ? colour : Qt::transparent);
    const QRectF box(centre - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius));
    if (line.mark == Mark::SecondPerson)
      painter.drawRoundedRect(box, 3, 3);
    else if (line.mark == Mark::SetAside)
      painter.drawPolygon(
          QPolygonF{{centre - QPointF(0, radius * 1.15), centre + QPointF(radius * 1.15, 0),
                     centre + QPointF(0, radius * 1.15), centre - QPointF(radius * 1.15, 0)}});
    else
      painter.drawEllipse(box);
    drawSign(painter, line.mark, centre, radius, box);
  }

  void drawSign(QPainter& painter, Mark mark, const QPointF& centre, double radius, const QRectF& box) {
    painter.setPen(QPen(groundOf(palette()), 2));
    if (mark == Mark::Done)
      painter.drawPolyline(
          QPolygonF{{centre + QPointF(-0.45, 0) * radius, centre + QPointF(-0.1, 0.35) * radius,
                     centre + QPointF(0.5, -0.4) * radius}});
    if (mark == Mark::Now) {
      painter.setBrush(groundOf(palette()));
      painter.drawPolygon(
          QPolygonF{{centre + QPointF(-0.25, -0.4) * radius, centre + QPointF(0.45, 0) * radius,
                     centre + QPointF(-0.25, 0.4) * radius}});
    }
    painter.setPen(QPen(inkOf(palette()), 2));
    if (mark == Mark::Blank)
      painter.drawLine(centre - QPointF(radius * 0.5, 0), centre + QPointF(radius * 0.5, 0));
    if (mark == Mark::SecondPerson) {
      painter.setFont(fontOfHeight(bench::kLabelHeight * 0.7, this));
      painter.drawText(box, Qt::AlignCenter, QStringLiteral("2"));
    }
  }

  std::vector<StepLine> m_lines;
};

StepList::StepList(QWidget* parent) : QScrollArea(parent), m_canvas(new Canvas(this)) {
  setWidget(m_canvas);
  setWidgetResizable(true);
  setFrameShape(QFrame::NoFrame);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFocusPolicy(Qt::NoFocus);
  viewport()->setAutoFillBackground(false);
  m_canvas->setAutoFillBackground(false);
}

void StepList::present(const Job& job, const Next& next) {
  std::vector<StepLine> lines;
  for (std::size_t i = 0; i < job.steps.size(); ++i) {
    const bool now = !job.finished && !job.paused && next.stage != Stage::Finish && i == next.step;
    const Step& step = job.sheet.steps[i];
    const Joint* joint = job.sheet.joint(step.joint);
    lines.push_back({static_cast<int>(i) + 1, joint != nullptr ? toQt(joint->name) : toQt(step.text),
                     markOf(job, i, now)});
  }
  m_canvas->setLines(std::move(lines));
  ensureVisible(0, static_cast<int>((static_cast<double>(next.step) + 0.5) * m_canvas->rowHeight()), 0,
                static_cast<int>(m_canvas->rowHeight() * 2));
}

}  // namespace cw
