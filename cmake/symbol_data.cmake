# SPDX-License-Identifier: GPL-3.0-or-later
# The drawings of the map's symbols compiled in, as the tables are: one SVG a symbol, ink #15211F, paper #FAFBFA.
file(GLOB symbol_files CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/resources/symbols/*.svg)
cordreach_embed(cordreach_symbol_data NAMESPACE cordreach::app FUNCTION embeddedSymbols FILES ${symbol_files})
