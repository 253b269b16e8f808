#include "app/print/joint_picture.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>

#include "app/drawing/joint_painter.h"
#include "app/look/measures.h"
#include "core/store/file_io.h"

namespace cw {

Result<void> writeJointPicture(const JointDrawing& drawing, const std::string& path, Existing existing) {
  constexpr int kSide = 1000;
  QImage image(kSide, kSide, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  QFont font(textFamily());
  font.setPixelSize(24);
  JointDrawingOptions options;
  options.showOrder = true;
  paintJoint(painter, image.rect(), drawing, JointInk::ofPaper(font), options);
  painter.end();
  QByteArray bytes;
  QBuffer buffer(&bytes);
  image.save(&buffer, "PNG");
  return writeFile(path, bytes.toStdString(), existing);
}

}  // namespace cw
