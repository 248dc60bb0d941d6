package org.cantonment.notation;

import java.util.List;

import org.cantonment.model.book.BookPackage;
import org.cantonment.model.campaign.CampaignPackage;
import org.cantonment.model.force.ForcePackage;
import org.cantonment.model.range.RangePackage;
import org.cantonment.model.ruleset.RulesetPackage;
import org.cantonment.model.shelf.ShelfPackage;
import org.eclipse.emf.ecore.EPackage;

import com.google.inject.Injector;

/** Sets the notation up, inside Eclipse and outside it alike: once, before the first file is read. */
public class BookStandaloneSetup extends BookStandaloneSetupGenerated {

    @Override
    public Injector createInjectorAndDoEMFRegistration() {
        // The grammar imports its model by name only; whoever reads a file must find it in the registry.
        for (EPackage each : List.<EPackage>of(BookPackage.eINSTANCE, RangePackage.eINSTANCE, RulesetPackage.eINSTANCE,
                ShelfPackage.eINSTANCE, ForcePackage.eINSTANCE, CampaignPackage.eINSTANCE)) {
            EPackage.Registry.INSTANCE.put(each.getNsURI(), each);
        }
        return super.createInjectorAndDoEMFRegistration();
    }
}
