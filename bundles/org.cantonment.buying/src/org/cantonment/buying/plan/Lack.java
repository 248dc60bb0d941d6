package org.cantonment.buying.plan;
import java.util.List;
import org.cantonment.buying.solve.Limits;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.finding.Finding;
import org.joda.money.CurrencyUnit;
final class Lack { Lack(Question q, CurrencyUnit c, Limits l, CancelToken t) {} List<Finding> findings() { return List.of(); } }
