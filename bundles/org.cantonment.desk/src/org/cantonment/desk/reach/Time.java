package org.cantonment.desk.reach;
import java.util.*;
import java.nio.file.*;
import org.cantonment.desk.*;
import org.cantonment.desk.shopping.*;
import org.cantonment.domain.common.*;
import org.cantonment.stock.ledger.AsOf;
public class Time {
  public static void main(String[] a) throws Exception {
    var meanings = CampaignDesk.open(DeskScope.noLists(Path.of(a[0])), CancelToken.NEVER, Progress.SILENT).snapshot().meanings();
    var mx = java.lang.management.ManagementFactory.getThreadMXBean();
    for (int round = 0; round < Integer.parseInt(a[1]); round++)
    for (String who : a.length > 2 ? a[2].split(",") : new String[] {"P-Heron","P-Coot","P-Rail","P-Dipper","P-Teal","P-Bittern","P-Snipe","P-Swift"}) {
      var p = ReachAnswer.player(meanings, who).get();
      long t0 = mx.getCurrentThreadCpuTime();
      var l = Lookout.of(meanings, p, AsOf.NOW, Optional.empty());
      long t1 = mx.getCurrentThreadCpuTime();
      var ans = l.pieces(CancelToken.NEVER, Progress.SILENT);
      long t2 = mx.getCurrentThreadCpuTime();
      var shops = Shops.of(meanings, Optional.of(p.id()), Errand.of(List.of(), Optional.empty()));
      var money = a.length > 3 ? ans : l.money(ans, shops, CancelToken.NEVER, Progress.SILENT);
      long t3 = mx.getCurrentThreadCpuTime();
      System.out.printf("%s prepare %d pieces %d money %d ms; rows %d unproven %d unprovenmoney %d%n", who, (t1-t0)/1000000, (t2-t1)/1000000, (t3-t2)/1000000, ans.rows().size(),
        ans.rows().stream().filter(r -> r.least().map(f -> !f.proven()).orElse(false) || r.most().map(f -> !f.proven()).orElse(false)).count(),
        money.rows().stream().filter(r -> r.least().flatMap(f -> f.price()).map(f -> !f.proven()).orElse(false) || r.most().flatMap(f -> f.price()).map(f -> !f.proven()).orElse(false)).count());
      if (round == 0 && a.length > 2) for (var r : money.rows()) System.out.println(r.title() + ", " + r.eraTitle() + "\n   " + r.least() + "\n   " + r.most());
    }
  }
}
