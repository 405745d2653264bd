namespace Loadmark.Circuits.Devices;

/// <summary>Finds the element for a device.</summary>
internal static class ElementFactory
{
    /// <summary>The element of a device.</summary>
    /// <exception cref="ArgumentException">The device is of a type that the engine does not know.</exception>
    public static Element Create(Device device, int index) => device switch
    {
        Resistor resistor => new ResistorElement(resistor, index),
        Capacitor capacitor => new CapacitorElement(capacitor, index),
        Diode diode => new DiodeElement(diode, index),
        VoltageSource source => new VoltageSourceElement(source, index),
        CurrentSource source => new CurrentSourceElement(source, index),
        OutletDevice outlet => new OutletElement(outlet, index),
        LoadDevice load => new LoadElement(load, index),
        Heater heater => new HeaterElement(heater, index),
        ResettableFuse fuse => new ResettableFuseElement(fuse, index),
        _ => throw new ArgumentException($"The engine knows no {device.GetType().Name}.", nameof(device)),
    };
}
