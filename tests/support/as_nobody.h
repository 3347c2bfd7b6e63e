// For as long as it lives, the program has the rights of nobody, so that file permissions count even when tests run as root.
#pragma once

#include <QtGlobal>

#include <unistd.h>

namespace support {

class AsNobody {
public:
    AsNobody() {
        if (m_before == 0 && ::seteuid(nobody) != 0) qFatal("cannot become nobody");
    }
    ~AsNobody() {
        if (m_before == 0 && ::seteuid(m_before) != 0) qFatal("cannot come back");
    }
    AsNobody(const AsNobody&) = delete;
    AsNobody& operator=(const AsNobody&) = delete;

private:
    static constexpr uid_t nobody = 65'534;
    uid_t m_before = ::geteuid();
};

}  // namespace support
