#pragma once
#include <QWidget>

#include "core/joint/working.h"

class QPushButton;

namespace cw {

class DocumentView;

/// How a result came about, folded until somebody asks. It stays open from one result to the next.
class WorkingView final : public QWidget {
  Q_OBJECT

 public:
  explicit WorkingView(QWidget* parent = nullptr);

  void present(const Working& working);
  DocumentView* document() const { return m_document; }

 private:
  void fold();

  QPushButton* m_open;
  DocumentView* m_document;
};

}  // namespace cw
