package org.cantonment.stock.turnout;

import java.util.ArrayList;
import java.util.List;

import org.cantonment.stock.solve.MinCostFlow;
import org.cantonment.stock.turnout.Instance.Crowd;

/** The ways through the crowds of one network, and who of a crowd went where: any who came in may have gone out anywhere. */
final class CrowdWays {

    private final Instance in;
    private final List<List<Integer>> enters = new ArrayList<>();
    private final List<List<Integer>> leaves = new ArrayList<>();
    private final int[][] direct;

    CrowdWays(Instance in) {
        this.in = in;
        direct = new int[in.crowds().isEmpty() ? 0 : in.classes().size()][];
        in.crowds().forEach(crowd -> {
            enters.add(new ArrayList<>(crowd.types().length));
            leaves.add(new ArrayList<>(crowd.classes().length));
        });
    }

    /** The ways into a crowd, in the order of its types. */
    void enter(int crowd, int arc) {
        enters.get(crowd).add(arc);
    }

    /** The ways out of a crowd, in the order of its classes. */
    void leave(int crowd, int arc) {
        leaves.get(crowd).add(arc);
    }

    /** Once the flow has run: the types in their order go to the classes in theirs. */
    void tellApart(MinCostFlow flow) {
        for (int k = 0; k < enters.size(); k++) {
            Crowd crowd = in.crowds().get(k);
            int t = 0;
            int left = flow.flow(enters.get(k).get(0));
            for (int i = 0; i < crowd.classes().length; i++) {
                for (int wanted = flow.flow(leaves.get(k).get(i)); wanted > 0;) {
                    while (left == 0) {
                        left = flow.flow(enters.get(k).get(++t));
                    }
                    int count = Math.min(left, wanted);
                    post(crowd.classes()[i], crowd.types()[t], count);
                    left -= count;
                    wanted -= count;
                }
            }
        }
    }

    private void post(int one, int type, int count) {
        if (direct[one] == null) {
            direct[one] = new int[in.direct()[one].size()];
        }
        direct[one][in.direct()[one].at(type)] += count;
    }

    /** How many of the class's i-th direct arc came with a crowd. */
    int direct(int one, int i) {
        return direct.length == 0 || direct[one] == null ? 0 : direct[one][i];
    }
}
