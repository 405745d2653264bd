namespace Loadmark.Web.Texts;

/// <summary>What the keys of the rig file are called on the page.</summary>
internal static class FieldNames
{
    /// <summary>The name of a key, for people.</summary>
    /// <param name="key">The key as the rig file has it.</param>
    public static string Of(string key) => key switch
    {
        "name" => "Name",
        "kind" => "Kind",
        "label" => "Label, as printed",
        "voltage" => "Voltage it takes",
        "current" => "Rated current",
        "watts" => "Rated power",
        "run" => "Running current, measured",
        "start" => "Starting current",
        "polarity" => "Polarity of its plug",
        "plug" => "Plug",
        "ground" => "Ground is",
        "isolate" => "Wants a return of its own",
        "draws" => "Draws like a constant",
        "starts_below" => "Does not start below",
        "stops_below" => "Stops below",
        "input_capacitance" => "Input capacitance",
        "priority" => "How much the show needs it (1 to 3)",
        "isolated" => "Outlets are isolated",
        "bank" => "Shares its return with bank",
        "source_ohms" => "Resistance behind it",
        "surge" => "Bears for a moment",
        "no_load" => "Voltage with nothing connected",
        "total" => "Gives in all",
        "overload" => "When overloaded",
        "regulated" => "Regulated",
        "mains" => "Mains",
        "headroom" => "Headroom to keep free",
        "type" => "Type",
        "length" => "Length",
        "tail" => "From the supply to the first plug",
        "pitch" => "From plug to plug",
        "plugs" => "Plugs for loads",
        "wire" => "Wire",
        "ohms" => "Resistance of each conductor",
        "contact_ohms" => "Resistance of each contact",
        "count" => "How many there are",
        _ => key,
    };
}
