"""What the shop owns: its cutters, machines and materials, as it lists them."""
