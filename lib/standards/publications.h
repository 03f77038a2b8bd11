/* SPDX-License-Identifier: MIT */
/*
 * The files of standards. A new publication is one file, one line here and one in standard.c.
 */
#ifndef INGLE_STANDARDS_PUBLICATIONS_H
#define INGLE_STANDARDS_PUBLICATIONS_H

#include "standards/rule.h"

extern const struct publication publication_irc;
extern const struct publication publication_ibc;
extern const struct publication publication_irc_early;
extern const struct publication publication_nfpa_211_inspection;
extern const struct publication publication_nfpa_211_fireplaces;
extern const struct publication publication_cabo;
extern const struct publication publication_ubc;
extern const struct publication publication_sbc;
extern const struct publication publication_nbfu;
extern const struct publication publication_farmers_bulletins;
extern const struct publication publication_federal_us;
extern const struct publication publication_bia;
extern const struct publication publication_local_us;
extern const struct publication publication_missouri_extension;
extern const struct publication publication_nfpa_211;
extern const struct publication publication_nasd_1254;
extern const struct publication publication_imc;
extern const struct publication publication_imc_chimneys;
extern const struct publication publication_astm_e1509;
extern const struct publication publication_ifgc_2009;
extern const struct publication publication_nyc_mechanical;
extern const struct publication publication_nyc_administrative;
extern const struct publication publication_newburgh_heights;
extern const struct publication publication_ohio;
extern const struct publication publication_missouri;
extern const struct publication publication_lorain;
extern const struct publication publication_north_hempstead;
extern const struct publication publication_red_lion;
extern const struct publication publication_florida_building;
extern const struct publication publication_florida_mechanical;
extern const struct publication publication_older_stoves;
extern const struct publication publication_purdue;
extern const struct publication publication_state_stove_rules;
extern const struct publication publication_hud_manufactured_home;
extern const struct publication publication_common_practice;
extern const struct publication publication_common_practice_canada;
extern const struct publication publication_ontario;
extern const struct publication publication_canada;
extern const struct publication publication_csa_b365;
extern const struct publication publication_england;
extern const struct publication publication_nhbc;
extern const struct publication publication_ireland;
extern const struct publication publication_europe;
extern const struct publication publication_australia;
extern const struct publication publication_nfpa_54;
extern const struct publication publication_california;
extern const struct publication publication_massachusetts;
extern const struct publication publication_ifgc;
extern const struct publication publication_older_gas;

#endif
