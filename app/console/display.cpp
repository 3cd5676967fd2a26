// SPDX-License-Identifier: GPL-3.0-or-later
// Connects and hangs up through libxcb, loaded when asked: Qt's own platform plugin does the same a moment later.
#include "console/display.h"

#include <dlfcn.h>

#include <cstdlib>
#include <memory>

namespace cordreach::console {

namespace {

struct Connection;
using Connect = Connection* (*)(const char* display, int* screen);
using HasError = int (*)(Connection* connection);
using Disconnect = void (*)(Connection* connection);

struct Close {
  void operator()(void* library) const { dlclose(library); }
};

template <class Function>
Function symbol(void* library, const char* name) {
  return reinterpret_cast<Function>(dlsym(library, name));
}

}  // namespace

bool displayAnswers() {
  const char* display = std::getenv("DISPLAY");
  if (display == nullptr || *display == '\0') return false;
  const std::unique_ptr<void, Close> library{dlopen("libxcb.so.1", RTLD_NOW | RTLD_LOCAL)};
  if (!library) return false;
  const auto connect = symbol<Connect>(library.get(), "xcb_connect");
  const auto hasError = symbol<HasError>(library.get(), "xcb_connection_has_error");
  const auto disconnect = symbol<Disconnect>(library.get(), "xcb_disconnect");
  if (connect == nullptr || hasError == nullptr || disconnect == nullptr) return false;
  // libxcb answers an object even for a failed connection, and it too is released by disconnecting.
  Connection* connection = connect(nullptr, nullptr);
  const bool answers = hasError(connection) == 0;
  disconnect(connection);
  return answers;
}

}  // namespace cordreach::console
